-- A helmet's whole life: ordered, on hold, at the reconditioner. A hold outlasts quarantine and
-- reconditioning, so it is a mark beside the state.
alter table helmet drop constraint helmet_state_check;
alter table helmet add constraint helmet_state_check check (state in
  ('ordered', 'available', 'issued', 'quarantined', 'held', 'at-reconditioner', 'retired'));
alter table helmet alter column manufactured_on drop not null;
alter table helmet add constraint helmet_made_when_here
  check (state in ('ordered', 'retired') or manufactured_on is not null);
alter table helmet add column expected_on date;
alter table helmet add column on_hold boolean not null default false;
alter table helmet add constraint helmet_on_hold_is_not_in_service
  check (not on_hold or state not in ('ordered', 'available', 'issued'));
-- Which sizes a player may need, as sizing advised last, one row a model and size; no head, no name.
create table advised_size (
  player uuid    not null,
  model  text    not null,
  size   text    not null,
  choice integer not null check (choice in (1, 2)),
  chance double precision check (chance between 0 and 1),
  primary key (player, model, size)
);
create index advised_size_by_size on advised_size (model, size);
