-- What a hold asks of a helmet. Empty in rows from before: the hold's event of each helmet counts alone there.
alter table helmet add lot text, add made_on date;

-- Holds as inventory tells of them: of many helmets each has its own event, and the last of these comes
-- late.
create table hold (
  hold uuid primary key,
  model text,
  lots text[] not null,
  made_from date,
  made_to date,
  lifted boolean not null,
  lifted_lots text[] not null,
  lifted_places text[] not null
);
-- What was said of single helmets. Listed: it is on the tag list. Settled: its own event has come, or the
-- hold was lifted for its tag.
create table hold_helmet (
  tag text not null,
  hold uuid not null,
  listed boolean not null default false,
  settled boolean not null default false,
  primary key (tag, hold)
);

-- Whether a hold that was placed concerns the helmet, and the helmet's own event is still to come. The
-- conditions are inventory's: all that are given, or the tag list; a lot that nobody could read counts.
create function hold_ahead(h_tag text, h_model text, h_lot text, h_made date, h_place text)
returns boolean language sql stable as $$
  select exists (
    select 1 from hold o left join hold_helmet h on h.tag = h_tag and h.hold = o.hold
     where not o.lifted
       and not coalesce(h.settled, false)
       and (coalesce(h.listed, false)
         or (o.model is not null or cardinality(o.lots) > 0
             or o.made_from is not null or o.made_to is not null)
           and (o.model is null or o.model = h_model)
           and (cardinality(o.lots) = 0 or coalesce(h_lot = any (o.lots) or h_lot = 'not-stated', false))
           and (o.made_from is null or coalesce(h_made >= o.made_from, false))
           and (o.made_to is null or coalesce(h_made <= o.made_to, false)))
       and not h_place = any (o.lifted_places)
       and not coalesce(h_lot = any (o.lifted_lots), false))
$$;
