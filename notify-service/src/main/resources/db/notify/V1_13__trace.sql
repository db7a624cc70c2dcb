-- What was heard and acted on, so that a notice can say what led to it and how long that took. Ids
-- and types only.
create table heard_event (
  event          uuid primary key,
  service        text not null,
  type           text not null,
  stream         text not null,
  happened_at    timestamptz not null,
  correlation_id uuid not null,
  causation_id   uuid not null
);

create index heard_event_by_age on heard_event (happened_at);
