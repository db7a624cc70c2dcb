-- Which player a roster number stands for; no personal data, so it outlives an erasure.
create table roster_number (
  number text primary key,
  player uuid not null unique
);

-- The players as they are now. The first columns say who somebody is: they are erased on request.
create table player (
  player      uuid primary key,
  number      text not null unique references roster_number (number),
  given_name  text not null,
  family_name text not null,
  birth_date  date not null,
  sex         text check (sex in ('m', 'f')),
  team        text not null,
  field       text not null
);

create index player_by_team on player (team);
create index player_by_field on player (field);

create table guardian (
  guardian uuid primary key,
  name     text not null,
  email    text,
  phone    text,
  language text not null check (language in ('en', 'es'))
);

create index guardian_by_email on guardian (lower(email));

create table guardianship (
  player   uuid not null references player on delete cascade,
  guardian uuid not null references guardian on delete cascade,
  place    integer not null,
  primary key (player, guardian)
);

create index guardianship_by_guardian on guardianship (guardian);
