-- State that is published to a compacted topic: the newest value of each key, no history. An erased
-- value is a row without data until its tombstone has been sent; then the row goes too.
create table current_state (
  topic      text        not null,
  type       text        not null,
  record_key text        not null,
  revision   bigint      not null,
  data       json,
  event_id   uuid        not null,
  changed_at timestamptz not null,
  unsent     boolean     not null default true,
  primary key (topic, type, record_key)
);

create index current_state_unsent on current_state (changed_at) where unsent;
create sequence current_state_revision;
