-- A name of 120 characters may be longer in small letters.
alter table import_species alter column name set data type varchar(400);
