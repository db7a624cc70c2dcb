-- More than one way to reach a person: which one a notice waits for, and since when.
alter table notice
  add column channel          text check (channel in ('mail', 'text')),
  add column channel_since    timestamptz,
  add column channel_attempts integer not null default 0 check (channel_attempts >= 0),
  add column looked_at        timestamptz;

update notice set channel = 'mail', channel_since = raised_at, channel_attempts = attempts
where why is distinct from 'no-address';

alter table notice
  add check ((channel is null) = (channel_since is null));

-- A channel's queue, most urgent first, in the order in which it is asked for.
drop index notice_due;
create index notice_due on notice
  (channel, (case urgency when 'do-not-wear' then 0 when 'soon' then 1 else 2 end), next_try_at)
  where state = 'raised';

alter table notice_try
  drop constraint notice_try_channel_check,
  add constraint notice_try_channel_check check (channel in ('mail', 'text'));

-- A channel's server refused the address for good, and has taken nothing for the person since.
create table bounce (
  recipient text not null,
  channel   text not null check (channel in ('mail', 'text')),
  code      text not null,
  at        timestamptz not null,
  primary key (recipient, channel)
);
