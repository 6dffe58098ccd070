create table document (
  practice_id text collate "C" not null,
  kind text collate "C" not null,
  id text collate "C" not null,
  body text collate "C" not null,
  hash text collate "C" not null,
  constraint document_key PRIMARY KEY (practice_id, kind, id),
  constraint document_kind CHECK ((kind = ANY (ARRAY['person'::text, 'place'::text, 'programme'::text, 'exercises'::text]))),
  constraint document_programme CHECK (((kind <> 'programme'::text) OR (id = hash)))
);

alter table document enable row level security;

alter table document force row level security;

create policy own on document for ALL
  using (practice_id = current_setting('app.practice'::text, true))
  with check (practice_id = current_setting('app.practice'::text, true));

create table event (
  practice_id text collate "C" not null,
  person_id text collate "C" not null,
  id text collate "C" not null,
  position bigint not null,
  body text collate "C" not null,
  hash text collate "C" not null,
  constraint event_key PRIMARY KEY (practice_id, person_id, id),
  constraint event_position UNIQUE (practice_id, person_id, "position")
);

alter table event enable row level security;

alter table event force row level security;

create policy own_add on event for INSERT
  with check (practice_id = current_setting('app.practice'::text, true));

create policy own_read on event for SELECT
  using (practice_id = current_setting('app.practice'::text, true));

create table link (
  practice_id text collate "C" not null,
  token_hash text collate "C" not null,
  person_id text collate "C" not null,
  expires_at bigint not null,
  taken_at bigint,
  device_hash text collate "C",
  constraint link_device UNIQUE (practice_id, device_hash),
  constraint link_key PRIMARY KEY (practice_id, token_hash),
  constraint link_taken CHECK (((taken_at IS NULL) = (device_hash IS NULL)))
);

CREATE INDEX link_by_device_hash ON public.link USING btree (device_hash);

CREATE INDEX link_by_token_hash ON public.link USING btree (token_hash);

alter table link enable row level security;

alter table link force row level security;

create policy by_token on link for SELECT
  using ((token_hash = current_setting('app.token'::text, true)) OR (device_hash = current_setting('app.token'::text, true)));

create policy own on link for ALL
  using (practice_id = current_setting('app.practice'::text, true))
  with check (practice_id = current_setting('app.practice'::text, true));

create table person_position (
  practice_id text collate "C" not null,
  person_id text collate "C" not null,
  last bigint not null,
  constraint person_position_key PRIMARY KEY (practice_id, person_id)
);

alter table person_position enable row level security;

alter table person_position force row level security;

create policy own on person_position for ALL
  using (practice_id = current_setting('app.practice'::text, true))
  with check (practice_id = current_setting('app.practice'::text, true));

create table plan_revision (
  practice_id text collate "C" not null,
  person_id text collate "C" not null,
  id text collate "C" not null,
  position bigint not null,
  body text collate "C" not null,
  hash text collate "C" not null,
  constraint plan_revision_key PRIMARY KEY (practice_id, person_id, id),
  constraint plan_revision_position UNIQUE (practice_id, person_id, "position")
);

alter table plan_revision enable row level security;

alter table plan_revision force row level security;

create policy own on plan_revision for ALL
  using (practice_id = current_setting('app.practice'::text, true))
  with check (practice_id = current_setting('app.practice'::text, true));

create table session (
  practice_id text collate "C" not null,
  token_hash text collate "C" not null,
  expires_at bigint not null,
  constraint session_key PRIMARY KEY (practice_id, token_hash)
);

CREATE INDEX session_by_token_hash ON public.session USING btree (token_hash);

alter table session enable row level security;

alter table session force row level security;

create policy by_token on session for SELECT
  using (token_hash = current_setting('app.token'::text, true));

create policy own on session for ALL
  using (practice_id = current_setting('app.practice'::text, true))
  with check (practice_id = current_setting('app.practice'::text, true));

create table standing_rule (
  practice_id text collate "C" not null,
  id text collate "C" not null,
  version bigint not null,
  body text collate "C" not null,
  constraint standing_rule_key PRIMARY KEY (practice_id, id, version)
);

alter table standing_rule enable row level security;

alter table standing_rule force row level security;

create policy own on standing_rule for ALL
  using (practice_id = current_setting('app.practice'::text, true))
  with check (practice_id = current_setting('app.practice'::text, true));
