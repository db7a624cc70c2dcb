-- What a field has of each part, as inventory tells. Counts and moves come on different streams, in
-- any order: what is there is the newest count and the moves since.
create table part_count (
  place   text not null,
  item    text not null,
  model   text not null,
  counted integer not null check (counted >= 0),
  at      timestamptz not null,
  primary key (place, item, model)
);

create table part_move (
  event  uuid primary key,
  place  text not null,
  item   text not null,
  pieces integer not null,
  at     timestamptz not null
);
create index part_move_by_place on part_move (place, item);

-- What a restock request was for: its receipt does not say it again.
create table part_requested (
  request uuid primary key,
  item    text not null
);

-- How long a session was put aside, so that the minutes of a fit are those of the work.
alter table fit_session add column paused_at timestamptz;
alter table fit_session add column paused_seconds bigint not null default 0;

-- When sizing gave the advice.
alter table advised_size add column advised_at timestamptz not null default 'epoch';
