-- Helmets as inventory tells: which count when it is asked how many of a size are there.
create table usable_helmet (
  tag    text primary key,
  model  text,
  size   text,
  usable boolean not null
);

create index usable_helmet_by_size on usable_helmet (model, size) where usable;
