-- Fields and depots, and the ways between them in minutes, one row a direction.
create table place (
  code       text primary key,
  name       text not null,
  kind       text not null check (kind in ('field', 'depot')),
  altitude_m numeric not null,
  zone       text not null
);
create table travel (
  from_place text not null references place (code),
  to_place   text not null references place (code),
  minutes    integer not null check (minutes >= 0),
  primary key (from_place, to_place),
  check (from_place <> to_place)
);
-- Where a player is fitted, copied from sizing's events; no names here.
create table player_field (
  player uuid primary key,
  field  text not null
);
