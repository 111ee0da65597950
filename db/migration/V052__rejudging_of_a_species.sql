-- A first target that counts for earlier readings has those judged anew that were taken where its species lived.
alter table rejudging add column species_id bigint;
create index ix_rejudging_species on rejudging (species_id);
alter table rejudging add constraint fk_rejudging_species foreign key (species_id) references species (id);
alter table rejudging drop constraint ck_rejudging_what;
alter table rejudging add constraint ck_rejudging_what check (
  (enclosure_id is not null and meter_id is null and species_id is null)
  or (enclosure_id is null and meter_id is not null and species_id is null)
  or (enclosure_id is null and meter_id is null and species_id is not null));
