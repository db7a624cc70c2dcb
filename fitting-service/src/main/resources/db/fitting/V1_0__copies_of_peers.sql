-- What the peers told, as far as this service needs it. Rows are made by whichever event comes first,
-- so that it does not matter in which order the topics are read.
create table player (
  player      uuid primary key,
  number      text,
  given_name  text,
  family_name text,
  team        text,
  field       text,
  on_roster   boolean not null default true
);
create index player_by_team on player (team);
create index player_by_field on player (field);

create table advised_size (
  player uuid not null,
  model  text not null,
  size   text,
  second text,
  reason text not null,
  primary key (player, model)
);

-- The sizes of each model, small to large.
create table model_size (
  model text not null,
  place integer not null,
  size  text not null,
  primary key (model, place)
);

create table helmet (
  tag             text primary key,
  model           text not null,
  size            text not null,
  place           text not null,
  state           text not null check (state in ('available', 'issued', 'quarantined', 'retired')),
  holder          uuid,
  certified_until date,
  returned_at     timestamptz,
  check (holder is null or state = 'issued')
);
create index helmet_by_place on helmet (place);

-- One row a case: what one case gives back and another gets is heard of in any order.
create table helmet_reservation (
  refit_case uuid not null,
  tag        text not null,
  player     uuid not null,
  primary key (refit_case, tag)
);
create index helmet_reservation_by_tag on helmet_reservation (tag);

create table place (
  code       text primary key,
  name       text not null,
  kind       text not null,
  altitude_m double precision not null,
  zone       text not null
);

create table travel (
  from_place text not null,
  to_place   text not null,
  minutes    integer not null check (minutes >= 0),
  primary key (from_place, to_place)
);
