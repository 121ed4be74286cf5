-- The club. One text for SQLite and PostgreSQL: ids are text made by the program or a phone,
-- times are milliseconds since 1970 (UTC), plans and events are JSON kept as text because no
-- query looks into them.

-- One row. Every change begins by raising the revision, so that changes follow one another also
-- where several programs share a server.
create table club (
  only_row integer primary key check (only_row = 1),
  revision bigint not null,
  last_arrival bigint not null
);
insert into club (only_row, revision, last_arrival) values (1, 0, 0);

create table player (
  id text primary key,
  name text not null,
  level double precision,
  hand text not null,
  notes text not null,
  age_group text not null,
  standing text not null
);

create table player_limit (
  player_id text not null references player (id) on delete cascade,
  avoided text not null,
  primary key (player_id, avoided)
);

create table training_group (
  id text primary key,
  name text not null
);

create table group_member (
  group_id text not null references training_group (id) on delete cascade,
  player_id text not null references player (id) on delete cascade,
  primary key (group_id, player_id)
);
create index group_member_player on group_member (player_id);

create table venue (
  id text primary key,
  name text not null,
  courts integer not null,
  setting text not null,
  ball text not null,
  surface text not null,
  altitude_metres double precision not null
);

create table training_session (
  id text primary key,
  name text not null,
  played_on text not null,
  starts_at text not null,
  venue_id text references venue (id) on delete set null,
  group_id text references training_group (id) on delete set null,
  state text not null,
  plan text not null
);
create index training_session_played on training_session (played_on, starts_at);

create table plan_template (
  name text primary key,
  plan text not null
);

-- Only ever added to, except where a person is erased or a walk-in is merged.
create table court_event (
  arrival bigint primary key,
  id text not null unique,
  session_id text not null references training_session (id),
  body text not null
);
create index court_event_session on court_event (session_id, arrival);

-- What was taken away for good, so that a phone that sends it again later does not bring it back.
create table forgotten (
  kind text not null,
  id text not null,
  primary key (kind, id)
);

-- A walk-in that turned out to be a player of the club.
create table merged_player (
  id text primary key,
  into_id text not null
);

-- Keys are kept as hashes only.
create table access_key (
  hash text primary key,
  kind text not null,
  scope text not null,
  expires_at bigint not null,
  revoked_at bigint
);

create table setting (
  name text primary key,
  content text not null
);

create table custom_drill (
  drill_key text primary key,
  yaml text not null
);
