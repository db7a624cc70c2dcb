-- A text message as the gateway knows it; no number and no words.
create table text_message (
  notice        uuid not null references notice (notice),
  -- Which message of the notice it is, from 1: tries of one message are the same to the gateway.
  message_group integer not null check (message_group >= 1),
  primary key (notice, message_group),
  -- What the gateway calls it, once it said so.
  gateway_id    text unique,
  state         text not null check (state in ('begun', 'accepted', 'delivered', 'failed')),
  changed_at    timestamptz not null
);

-- Signatures of receipts that were let in, kept as long as their time stamp is.
create table receipt_seen (
  signature text primary key,
  until     timestamptz not null
);

create index receipt_seen_until on receipt_seen (until);

-- Who turned off what is not about safety. The proof is the event opted-out in the journal.
create table opt_out (
  recipient text primary key,
  version   bigint not null check (version >= 1),
  notice    uuid not null,
  at        timestamptz not null
);
