-- Days of games with rotating partners: what was asked for, the rounds, the scores. The body is
-- JSON kept as text because no query looks into it.
create table play_day (
  id text primary key,
  name text not null,
  played_on text not null,
  body text not null
);
