#!/usr/bin/env node
import "./dist/stave.js";
