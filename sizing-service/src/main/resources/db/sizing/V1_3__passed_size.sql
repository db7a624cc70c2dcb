-- The size in which a player's fit check passed last, as fitting tells it.
create table passed_size (
  player uuid primary key,
  model  text not null,
  size   text not null,
  at     timestamptz not null
);
