/** A mutant that is noticed is enough: the smallest example of it is not sought. */
import fc from "fast-check";

fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
