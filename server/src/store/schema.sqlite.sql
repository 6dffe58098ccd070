CREATE INDEX "link_by_device_hash" on "link" ("device_hash");

CREATE INDEX "link_by_token_hash" on "link" ("token_hash");

CREATE INDEX "session_by_token_hash" on "session" ("token_hash");

CREATE TABLE "document" (
  "practice_id" text not null,
  "kind" text not null,
  "id" text not null,
  "body" text not null,
  "hash" text not null,
  constraint "document_key" primary key ("practice_id", "kind", "id"),
  constraint "document_kind" check (kind in ('person', 'place', 'programme', 'exercises')),
  constraint "document_programme" check (kind <> 'programme' or id = hash)) strict;

CREATE TABLE "event" (
  "practice_id" text not null,
  "person_id" text not null,
  "id" text not null,
  "position" integer not null,
  "body" text not null,
  "hash" text not null,
  constraint "event_key" primary key ("practice_id", "person_id", "id"),
  constraint "event_position" unique ("practice_id", "person_id", "position")) strict;

CREATE TABLE "link" (
  "practice_id" text not null,
  "token_hash" text not null,
  "person_id" text not null,
  "expires_at" integer not null,
  "taken_at" integer,
  "device_hash" text,
  constraint "link_key" primary key ("practice_id", "token_hash"),
  constraint "link_device" unique ("practice_id", "device_hash"),
  constraint "link_taken" check ((taken_at is null) = (device_hash is null))) strict;

CREATE TABLE "person_position" (
  "practice_id" text not null,
  "person_id" text not null,
  "last" integer not null,
  constraint "person_position_key" primary key ("practice_id", "person_id")) strict;

CREATE TABLE "plan_revision" (
  "practice_id" text not null,
  "person_id" text not null,
  "id" text not null,
  "position" integer not null,
  "body" text not null,
  "hash" text not null,
  constraint "plan_revision_key" primary key ("practice_id", "person_id", "id"),
  constraint "plan_revision_position" unique ("practice_id", "person_id", "position")) strict;

CREATE TABLE "session" (
  "practice_id" text not null,
  "token_hash" text not null,
  "expires_at" integer not null,
  constraint "session_key" primary key ("practice_id", "token_hash")) strict;

CREATE TABLE "standing_rule" (
  "practice_id" text not null,
  "id" text not null,
  "version" integer not null,
  "body" text not null,
  constraint "standing_rule_key" primary key ("practice_id", "id", "version")) strict;

CREATE TRIGGER event_no_delete before delete on event begin select raise(abort, 'events are never altered'); end;

CREATE TRIGGER event_no_update before update on event begin select raise(abort, 'events are never altered'); end;
