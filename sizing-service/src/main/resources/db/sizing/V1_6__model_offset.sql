-- What the passed fit checks say about a model: how much larger or smaller heads count in it than
-- its chart says. The weights are those of the offsets from -15 to +15 mm.
create table model_offset (
  model      text primary key,
  fits       bigint not null check (fits >= 0),
  weights    double precision[] not null,
  applied_mm integer not null
);
