-- The files of an archive that are no sheets.
alter table import_run add column left_out varchar(1000000) default '[]' not null;
comment on column import_run.left_out is 'names of the files in the archive that are no sheets, JSON';
