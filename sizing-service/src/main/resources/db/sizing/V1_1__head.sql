-- The newest head of each player, and the readings before it; by player id only.
create table head (
  player         uuid not null,
  version        bigint not null,
  value_mm       double precision not null check (value_mm between 300 and 750),
  uncertainty_mm double precision not null check (uncertainty_mm >= 0),
  readings       text not null,
  measured_by    text not null,
  measured_at    timestamptz not null,
  primary key (player, version)
);

create table advice (
  player  uuid not null,
  model   text not null,
  chart_version integer not null,
  size    text,
  second  text,
  outcome text not null,
  reason  text not null,
  primary key (player, model)
);
