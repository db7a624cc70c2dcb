-- Tags that were printed before their helmets came: none is ever given twice, and a sheet that was
-- lost can be printed again.
create table reserved_tag (
  tag         text primary key,
  delivery    uuid not null,
  position    integer not null check (position >= 1),
  model       text not null,
  size        text not null,
  reserved_at timestamptz not null,
  reserved_by text not null,
  unique (delivery, position)
);
-- One delivery that is being taken in by scanning: what is the same for all its helmets is said once.
create table receiving (
  receiving       uuid primary key,
  model           text not null,
  size            text not null,
  lot             text not null,
  manufactured_on date not null,
  certified_until date,
  place           text not null references place (code),
  opened_at       timestamptz not null,
  opened_by       text not null
);
create table received_helmet (
  tag       text primary key,
  receiving uuid not null references receiving (receiving),
  number    bigint generated always as identity,
  how       text not null check (how in ('tagged', 'ordered', 'untagged')),
  at        timestamptz not null
);
create index received_helmet_by_receiving on received_helmet (receiving, number);
