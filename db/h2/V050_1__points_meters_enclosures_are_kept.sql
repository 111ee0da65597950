-- H2 watches over a foreign key by an index of its columns alone, beside the one that they begin: another entry for each
-- reading and visit. Points, meters and enclosures are retired and never deleted; PostgreSQL goes on watching.
alter table reading drop constraint fk_reading_point;
alter table reading drop constraint fk_reading_meter;
alter table visit drop constraint fk_visit_enclosure;
