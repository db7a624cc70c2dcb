-- The sign-off of each player as its stream tells; whether it is due or lapsed follows from the date.
create table sign_off (
  player  uuid primary key,
  state   text not null check (state in ('signed-off', 'withdrawn', 'lapsed')),
  session uuid,
  tag     text not null,
  model   text,
  size    text,
  fitter  text,
  why     text,
  at      timestamptz not null
);
-- A helmet is signed off for one player at most.
create unique index sign_off_live on sign_off (tag) where state = 'signed-off';

create table fit_session (
  session uuid primary key,
  player  uuid not null,
  field   text not null,
  fitter  text not null,
  status  text not null,
  at      timestamptz not null,
  ended_at timestamptz
);
create index fit_session_by_player on fit_session (player);
