-- How a notice is followed up when nobody confirms it.
alter table notice
  add column sent_at     timestamptz,
  -- When to look whether the next step is due; null: never again.
  add column escalate_at timestamptz,
  -- Since when people have to reach the person; null while channels may.
  add column people_at   timestamptz;

create index notice_to_escalate on notice (escalate_at) where escalate_at is not null;
create index notice_for_people on notice (people_at)
  where people_at is not null and state in ('raised', 'sent', 'undeliverable');

-- What was open before is followed up from now on; it is told together, in one notice each.
update notice set sent_at = changed_at where state in ('sent', 'acknowledged');
update notice set
  escalate_at = now(),
  people_at = case when state = 'undeliverable' then changed_at end
where state in ('raised', 'sent', 'undeliverable')
  and recipient ~ '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$';

-- The steps that were taken, each once.
create table notice_escalation (
  notice uuid not null references notice (notice) on delete cascade,
  step   text not null check (step in ('second-channel', 'fitters', 'manager')),
  at     timestamptz not null,
  primary key (notice, step)
);

-- Whom staff are to reach, until they are told of it together with others.
create table staff_matter (
  recipient text not null,
  notice    uuid not null references notice (notice) on delete cascade,
  at        timestamptz not null,
  -- The notice that told it; null: it waits.
  told_in   uuid,
  primary key (recipient, notice)
);

create index staff_matter_waiting on staff_matter (recipient, at) where told_in is null;

-- When staff were last told, so that many matters make few mails.
create table staff_pace (
  recipient text primary key,
  told_at   timestamptz
);

-- So that staff know a child from another of the same first name, and whose it is.
alter table player
  add column if not exists number text,
  add column if not exists field  text;
