-- Who gets which helmet when many need one: worked out, compared, and kept when it is committed.
create table plan (
  plan           uuid primary key,
  state          text not null check (state in ('draft', 'committed', 'over')),
  wish           text not null,
  fingerprint    text not null,
  policy_version integer not null,
  seekers        integer not null,
  helmets        integer not null,
  served         integer not null,
  minutes        bigint not null,
  cost           bigint not null,
  least_possible bigint not null,
  made_by        text not null,
  made_at        timestamptz not null,
  committed_at   timestamptz,
  kept_until     timestamptz,
  check ((state = 'draft') = (committed_at is null))
);
create index plan_by_age on plan (made_at);
create table plan_line (
  plan    uuid not null references plan (plan),
  player  uuid not null,
  field   text not null,
  tag     text not null,
  model   text not null,
  size    text not null,
  place   text not null,
  liking  text not null,
  minutes integer not null,
  outcome text check (outcome in ('kept', 'helmet-gone', 'not-needed', 'to-buy')),
  primary key (plan, player),
  unique (plan, tag)
);
-- Who gets none: players of one field who accept the same, with the reason in words.
create table plan_left (
  plan     uuid not null references plan (plan),
  ordinal  integer not null,
  field    text not null,
  players  integer not null check (players >= 1),
  reason   text not null,
  helps    text not null,
  primary key (plan, ordinal)
);
