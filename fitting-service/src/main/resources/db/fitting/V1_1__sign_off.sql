-- The sign-off of each player as its stream tells; whether it is due or lapsed follows from the date.
create table sign_off (
  player  uuid primary key,
  state   text not null check (state in ('signed-off', 'withdrawn', 'lapsed')),
  session uuid,
  tag     text not null,
  model   text,
  size    text,
  why     text,
  at      timestamptz not null
);
create index sign_off_by_tag on sign_off (tag);

create table open_session (
  session uuid primary key,
  player  uuid not null,
  field   text not null,
  fitter  text not null,
  status  text not null,
  at      timestamptz not null
);
create index open_session_by_player on open_session (player);
