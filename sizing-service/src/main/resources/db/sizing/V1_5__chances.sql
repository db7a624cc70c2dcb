-- How the hair was when the head was measured, and how likely each size is.
alter table head add column hair text not null default 'usual'
  check (hair in ('usual', 'short', 'long', 'braids'));
alter table advice add column chances text not null default '';
