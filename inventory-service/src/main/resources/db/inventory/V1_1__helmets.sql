-- One helmet, one row: what its stream of events says now, for searching.
create table helmet (
  tag             text primary key,
  model           text not null,
  size            text not null,
  lot             text not null,
  manufactured_on date not null,
  certified_until date,
  place           text not null references place (code),
  state           text not null check (state in ('available', 'issued', 'quarantined', 'retired')),
  holder          uuid,
  reserved_for    uuid,
  check ((state = 'issued') = (holder is not null)),
  check (reserved_for is null or state = 'available')
);
create unique index one_player_one_helmet on helmet (holder) where holder is not null;
create index helmet_search on helmet (model, size) where state = 'available';
create sequence helmet_number start 900001;
-- Which row of a file without tags became which helmet, so that the file again changes nothing.
create table helmet_import (
  line    text not null,
  ordinal integer not null,
  tag     text not null,
  primary key (line, ordinal)
);
