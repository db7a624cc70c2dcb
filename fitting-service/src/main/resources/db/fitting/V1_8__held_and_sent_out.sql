-- A helmet may be on hold or at the reconditioner, too.
alter table helmet drop constraint helmet_state_check;
alter table helmet add constraint helmet_state_check
  check (state in ('available', 'issued', 'quarantined', 'held', 'at-reconditioner', 'retired'));
