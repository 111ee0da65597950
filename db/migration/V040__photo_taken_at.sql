-- A photo may be taken without signal and stored hours later.
alter table visit_photo add column taken_at timestamp with time zone;
update visit_photo set taken_at = recorded_at;
alter table visit_photo alter column taken_at set not null;
comment on column visit_photo.taken_at is 'by the clock of the server; of photos from before this column when they were stored';
