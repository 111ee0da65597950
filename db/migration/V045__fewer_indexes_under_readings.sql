-- A verdict rests on rows that are never deleted: species, target versions, calibrations, rig changes, vet's orders. To
-- watch over each of them cost an index entry for every verdict. The site of a reading or verdict is that of its visit.
-- Together they were seven of eighteen entries for each reading; an eighth said what ix_reading_meter_taken says. What a
-- reading stands on is watched: visit, point, meter and person.
alter table verdict drop constraint fk_verdict_species;
alter table verdict drop constraint fk_verdict_target_version;
alter table verdict drop constraint fk_verdict_calibration;
alter table verdict drop constraint fk_verdict_rig;
alter table verdict drop constraint fk_verdict_vet_order;
alter table verdict drop constraint fk_verdict_site;
alter table reading drop constraint fk_reading_site;
alter table reading drop constraint fk_reading_meter;
drop index ix_verdict_species;
drop index ix_verdict_target_version;
drop index ix_verdict_calibration;
drop index ix_verdict_rig;
drop index ix_verdict_vet_order;
drop index ix_verdict_site;
drop index ix_reading_site;
drop index ix_reading_meter;
alter table reading add constraint fk_reading_meter foreign key (meter_id) references meter (id);
