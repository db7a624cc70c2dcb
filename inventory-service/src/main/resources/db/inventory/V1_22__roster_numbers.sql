-- The player's number in the roster, which people read out and search for; never a name.
alter table player_field add column number text;

create index player_field_by_number on player_field (number);
