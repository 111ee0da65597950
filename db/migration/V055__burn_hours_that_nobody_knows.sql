-- Of a lamp from the shelf nobody may know how long it has burnt.
alter table lamp alter column burn_hours_at_entry drop not null;
comment on column lamp.burn_hours_at_entry is 'how long it had burnt when it was entered, h; null: not known';
