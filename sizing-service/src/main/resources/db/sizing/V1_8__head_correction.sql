-- What a head was held to be before it was corrected or withdrawn. A withdrawn head does not stand
-- among the heads any more, so it is only here that its readings can be looked up.
create table head_correction (
  player       uuid not null,
  version      bigint not null,
  corrects     bigint not null,
  withdrawn    boolean not null,
  was_mm       double precision not null check (was_mm between 300 and 750),
  was_readings text not null,
  why          text not null,
  measured_by  text not null,
  measured_at  timestamptz not null,
  corrected_by text not null,
  corrected_at timestamptz not null,
  primary key (player, version)
);
