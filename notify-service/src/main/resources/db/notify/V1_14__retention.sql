-- Who left the roster, until the copies of their details are deleted.
create table player_left (
  player  uuid primary key,
  left_at timestamptz not null
);

create index player_left_by_age on player_left (left_at);

-- How many rows a run deleted of what; a run that deleted nothing has none.
create table retention_run (
  started_at timestamptz not null,
  what       text not null,
  older_than timestamptz not null,
  deleted    integer not null check (deleted > 0),
  primary key (started_at, what)
);

create index notice_by_change on notice (changed_at) where state <> 'raised';
