-- What a place may need is worked out whenever its shelf is lowered: looked up, not counted through.
create index refit_case_by_field on refit_case (field, opened_at);
create index refit_case_by_opening on refit_case (opened_at);
create index player_field_by_field on player_field (field);
create index worn_helmet_by_kind on helmet (model, size, holder) where holder is not null;
