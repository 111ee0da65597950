-- Readings that were written down elsewhere: whom the sheet names, where that is nobody known here, and whether it knows the
-- day alone; then begun_at is noon of it, in site time.
alter table visit add column taken_by varchar(120);
alter table visit add column day_only boolean default false not null;
comment on column visit.taken_by is 'the name on a sheet; person_id is then who imported it';
comment on column visit.day_only is 'begun_at is noon of the day: no more is known';
