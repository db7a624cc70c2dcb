-- What a re-check depends on: the conditions at the fit, and what happened since.
alter table sign_off
  add column fit_air_celsius double precision,
  add column fit_altitude_m double precision,
  add column fit_hair text;

alter table player
  add column measured_at timestamptz,
  add column remeasure_due_at timestamptz;

alter table helmet add column cosmetic_damage_at timestamptz;

-- The newest temperature that was told of a field.
create table field_conditions (
  field       text primary key,
  air_celsius double precision not null,
  measured_at timestamptz not null
);

create table hair_change (
  player uuid primary key,
  hair   text not null,
  at     timestamptz not null
);

-- Who is out of play; a row goes when a person confirms that the return was cleared.
create table out_of_play (
  player uuid primary key,
  since  timestamptz not null
);

-- Which re-checks were told to be due: one cause of one sign-off once, whichever copy of the service
-- is first.
create table recheck_told (
  session uuid not null,
  rule    text not null,
  cause   text not null,
  primary key (session, rule, cause)
);
