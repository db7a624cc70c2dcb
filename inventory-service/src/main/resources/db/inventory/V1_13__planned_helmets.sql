-- Helmets that a committed plan keeps; the mark on the helmet itself is what a search meets when it
-- locks the row.
alter table helmet add column planned_for uuid;
create unique index one_planned_helmet_each on helmet (planned_for) where planned_for is not null;
create table planned_helmet (
  tag        text primary key references helmet (tag),
  player     uuid not null unique,
  plan       uuid not null references plan (plan),
  field      text not null,
  kept_until timestamptz not null
);
create index planned_helmet_by_plan on planned_helmet (plan);
