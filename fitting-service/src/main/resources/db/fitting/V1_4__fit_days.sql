-- How often a day was moved or cancelled: calendars keep the highest.
alter table fit_day add column sequence integer not null default 0;

-- Who brings whom: siblings come together. Ids only.
create table guardianship (
  guardian uuid not null,
  player   uuid not null,
  primary key (guardian, player)
);
create index guardianship_by_player on guardianship (player);

create index fit_session_by_end on fit_session (ended_at);
