-- People who left: what they recorded stays, their names go after a time that the site settles.
alter table person add column erased_at timestamp with time zone;
alter table person_history add column erased_at timestamp with time zone;
comment on column person.erased_at is 'when name, sign-in name and password went; none: they are there';

alter table site_settings add column names_kept_months int default 24;
alter table site_settings add constraint ck_site_settings_names_kept
  check (names_kept_months >= 0 and names_kept_months <= 1200);
alter table site_settings_history add column names_kept_months int;
comment on column site_settings.names_kept_months is 'how long names are kept of people who left, months; none: for ever';
