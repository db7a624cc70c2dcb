-- Commands by the id that their sender made, with the answer that was given.
create table command_log (
  command_id  uuid        primary key,
  command     text        not null,
  body_hash   bytea       not null,
  status      integer,
  answer      text,
  received_at timestamptz not null
);
