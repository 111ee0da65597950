-- A reading is evidence: the server itself refuses to change or delete one. H2 has no triggers in SQL; there the
-- program's repository, which offers no update, is the only guard.
create function refuse_change_of_reading() returns trigger language plpgsql as $$
begin
  raise exception 'a reading is never changed or deleted: supersede it';
end $$;

create trigger reading_never_changes before update or delete on reading
  for each row execute function refuse_change_of_reading();
