-- Photos of damage, apart from the journal: an event is for ever, a photo may show somebody and
-- must be deletable. In the database and not in a folder: it is stored, backed up and given up
-- together with the rest, needs no shared disk when two copies of the service run, and is small
-- (made anew at most 1600 pixels wide or high, some 200 to 400 kB).
create table damage_photo (
  report     uuid primary key,
  tag        text not null references helmet (tag),
  jpeg       bytea,
  width      integer not null check (width between 1 and 1600),
  height     integer not null check (height between 1 and 1600),
  stored_at  timestamptz not null,
  stored_by  text not null,
  deleted_at timestamptz,
  deleted_by text,
  check ((jpeg is null) = (deleted_at is not null)),
  check ((deleted_at is null) = (deleted_by is null))
);
create index damage_photo_by_tag on damage_photo (tag);
