-- Local copies of people, fed from the topic people; erased when their tombstone comes. Only what a
-- notice needs: no birth date, no family name of a player.
create table guardian (
  guardian uuid primary key,
  name     text not null,
  email    text check (email <> ''),
  phone    text check (phone <> ''),
  language text not null check (language ~ '^[a-z]{2}$')
);

create table guardianship (
  guardian uuid not null references guardian (guardian) on delete cascade,
  player   uuid not null,
  primary key (guardian, player)
);

create index guardianship_by_player on guardianship (player);

create table player (
  player     uuid primary key,
  given_name text not null,
  team       text not null
);

-- Fields and depots, fed from inventory's place-listed.
create table place (
  place text primary key,
  name  text not null,
  zone  text not null
);
