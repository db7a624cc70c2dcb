-- For which head a new measurement was asked for last; by player id only.
create table remeasure_asked (
  player       uuid primary key,
  head_version bigint not null
);
