-- How far this service has come in each stream of each topic that it reads. The row is moved on in
-- the transaction of the effect, so that the effect happens exactly once.
create table inbox_position (
  topic   text   not null,
  stream  text   not null,
  version bigint not null check (version >= 1),
  primary key (topic, stream)
);

-- Records that could not be applied, with all later ones of their streams, kept as they came.
create table inbox_parked (
  id         bigint generated always as identity primary key,
  topic      text        not null,
  kafka_partition integer not null,
  kafka_offset    bigint  not null,
  stream     text        not null,
  version    bigint      not null,
  type       text,
  event_id   uuid,
  record_key text,
  headers    jsonb       not null,
  payload    text,
  reason     text        not null,
  detail     text        not null,
  tries      integer     not null,
  parked_at  timestamptz not null,
  unique (topic, stream, version)
);
