-- The journal: the truth of a service. A row is written once, in the transaction of the state that
-- it changes, and never altered or removed; the trigger below refuses both.
create table journal (
  position       bigint generated always as identity primary key,
  event_id       uuid        not null unique,
  stream         text        not null check (stream <> ''),
  version        bigint      not null check (version >= 1),
  type           text        not null,
  record_key     text        not null,
  recorded_at    timestamptz not null,
  correlation_id uuid        not null,
  causation_id   uuid        not null,
  -- json, not jsonb: the hash covers the very text that was written.
  data           json        not null,
  hash           bytea       not null check (octet_length(hash) = 32),
  unique (stream, version)
);

create index journal_by_correlation on journal (correlation_id);

create function journal_is_written_once() returns trigger language plpgsql as $$
begin
  raise exception 'the journal is written once: % refused', tg_op;
end $$;

create trigger journal_is_written_once
  before update or delete or truncate on journal
  for each statement execute function journal_is_written_once();

-- What the relay has still to send. Apart from the journal, so that the journal is never updated;
-- publishing again is to insert positions here.
create table journal_unsent (
  position bigint primary key references journal (position)
);
