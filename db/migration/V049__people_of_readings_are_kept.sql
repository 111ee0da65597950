-- People are never deleted, only ended, and the visit of a reading names and watches one too: to watch over who recorded
-- each reading cost one of its ten index entries.
alter table reading drop constraint fk_reading_person;
drop index ix_reading_person;
