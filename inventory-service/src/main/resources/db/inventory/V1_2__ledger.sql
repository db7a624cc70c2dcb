-- Parts in double entry: every move takes from one account what it gives to another. Accounts are
-- places (place:NORTH) and the world outside (outside:opening, outside:supplier, outside:used ...).
create table ledger_move (
  id    uuid primary key,
  why   text not null,
  at    timestamptz not null
);
create table ledger_entry (
  move    uuid not null references ledger_move (id),
  account text not null,
  item    text not null,
  model   text not null default '',
  amount  integer not null check (amount <> 0),
  primary key (move, account, item, model)
);
create index ledger_by_account on ledger_entry (account, item, model);
create function ledger_is_balanced() returns trigger language plpgsql as $$
declare moved uuid;
begin
  if tg_op = 'DELETE' then moved := old.move; else moved := new.move; end if;
  if exists (select 1 from ledger_entry where move = moved
             group by item, model having sum(amount) <> 0) then
    raise exception 'the ledger move % is not balanced', moved using errcode = '23514';
  end if;
  return null;
end $$;
create constraint trigger ledger_is_balanced
  after insert or update or delete on ledger_entry
  deferrable initially deferred for each row execute function ledger_is_balanced();
