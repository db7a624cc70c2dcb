create table refit_case (
  refit_case uuid primary key,
  player     uuid not null,
  field      text not null,
  team       text not null,
  urgency    text not null,
  why        text not null,
  tag        text,
  status     text not null check (status in ('open', 'closed')),
  opened_at  timestamptz not null
);
-- One open case a player.
create unique index refit_case_open on refit_case (player) where status = 'open';

-- What a case needs, and when it is there. Several parts of one kind are one need.
create table refit_need (
  refit_case uuid not null references refit_case,
  need_key   text not null,
  tag        text,
  arrives_at timestamptz,
  missing    boolean not null default false,
  primary key (refit_case, need_key)
);

-- Re-fits of players who are not on the roster here, or not yet.
create table owed_refit (
  player         uuid primary key,
  why            text not null,
  tag            text,
  needs          text not null,
  correlation_id uuid not null
);

create table fit_day (
  fit_day   uuid primary key,
  field     text not null,
  starts_at timestamptz not null,
  ends_at   timestamptz not null,
  zone      text not null,
  fitters   integer not null,
  minutes   integer not null,
  cancelled boolean not null default false
);
create index fit_day_by_field on fit_day (field, starts_at);

-- One row a slot and fitter. A slot has one case, a case one slot.
create table fit_slot (
  fit_day    uuid not null references fit_day,
  starts_at  timestamptz not null,
  lane       integer not null,
  ends_at    timestamptz not null,
  refit_case uuid unique,
  primary key (fit_day, starts_at, lane)
);
create index fit_slot_free on fit_slot (starts_at) where refit_case is null;
