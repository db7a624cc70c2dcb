-- What a hold makes thousands of in a minute is looked up by case and by player.
create index restock_cause_by_case on restock_cause (refit_case, need_key);
create index refit_case_open_by_player on refit_case (player) where open;
