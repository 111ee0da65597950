-- H2 keeps an index of its own for each foreign key that stands before an index of just its columns, so that readings,
-- their verdicts and visits were entered twice. The site of a visit is that of its enclosure.
alter table reading drop constraint fk_reading_supersedes;
alter table reading add constraint fk_reading_supersedes foreign key (supersedes_id) references reading (id);
alter table verdict drop constraint fk_verdict_reading;
drop index ix_verdict_reading;
create index ix_verdict_reading on verdict (reading_id);
alter table verdict add constraint fk_verdict_reading foreign key (reading_id) references reading (id);
alter table visit drop constraint fk_visit_site;
drop index ix_visit_site;
