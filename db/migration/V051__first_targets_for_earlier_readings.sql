-- A first target may count for all readings, also for those taken before it was approved, if its approver says so; every
-- other version counts from its approval. Who approved it when stays on record beside that.
alter table target_version add column in_force_from timestamp with time zone;
update target_version set in_force_from = approved_at;
alter table target_version alter column in_force_from set not null;
alter table target_version add constraint ck_target_version_in_force check (in_force_from = approved_at
  or (number = 1 and in_force_from < approved_at));
drop index ix_target_version_in_force;
create index ix_target_version_in_force on target_version (species_id, in_force_from);
comment on column target_version.in_force_from is '1970-01-01: the start of the record, for all readings';
