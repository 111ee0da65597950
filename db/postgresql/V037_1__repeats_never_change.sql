-- What was typed for a reading is evidence as the reading is.
create trigger reading_repeat_never_changes before update or delete on reading_repeat
  for each row execute function refuse_change_of_reading();
