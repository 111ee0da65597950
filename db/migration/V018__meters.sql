-- What is said of a meter: its range, how sure it is and who says so, whose it is.
alter table meter add column range_low double precision;
alter table meter add column range_high double precision;
alter table meter add column stated_share double precision;
alter table meter add column stated_source varchar(200);
alter table meter add column lender varchar(120);
alter table meter add column borrowed_until date;
alter table meter add column note varchar(500);
alter table meter add constraint ck_meter_range_low check (range_low > -1000000 and range_low < 1000000);
alter table meter add constraint ck_meter_range_high check (range_high > range_low and range_high < 1000000);
alter table meter add constraint ck_meter_range check ((range_low is null and range_high is null) or (range_low is not null and range_high is not null));
alter table meter add constraint ck_meter_stated_share check (stated_share > 0 and stated_share < 1);
alter table meter add constraint ck_meter_stated_source check ((stated_share is null and stated_source is null) or (stated_share is not null and stated_source is not null));
alter table meter add constraint ck_meter_loan check (borrowed_until is null or lender is not null);
comment on column meter.range_low is 'lowest amount that it shows, in the unit of the quantity; none: not known';
comment on column meter.range_high is 'highest amount that it shows, in the unit of the quantity';
comment on column meter.stated_share is 'expanded uncertainty (95 %) as a share of the reading; none: common practice is taken';
comment on column meter.lender is 'whom it is borrowed from; none: the site owns it';
comment on column meter.borrowed_until is 'last day that it may be kept, in the time of the site';

alter table meter_history add column range_low double precision;
alter table meter_history add column range_high double precision;
alter table meter_history add column stated_share double precision;
alter table meter_history add column stated_source varchar(200);
alter table meter_history add column lender varchar(120);
alter table meter_history add column borrowed_until date;
alter table meter_history add column note varchar(500);

-- A wrong calibration is withdrawn and stays on record. One that holds carries its instant a second time, under a
-- unique constraint, so that no two of one meter hold from the same instant.
alter table calibration add column open_calibrated_at timestamp with time zone;
alter table calibration add column withdrawn_at timestamp with time zone;
alter table calibration add column withdrawn_by bigint;
alter table calibration add column withdrawal_reason varchar(200);
update calibration set open_calibrated_at = calibrated_at;
alter table calibration add constraint fk_calibration_withdrawn_by foreign key (withdrawn_by) references person (id);
alter table calibration add constraint uq_calibration_open unique (meter_id, open_calibrated_at);
alter table calibration add constraint ck_calibration_open check (
  (withdrawn_at is null and withdrawn_by is null and withdrawal_reason is null and open_calibrated_at = calibrated_at)
  or (withdrawn_at is not null and withdrawn_by is not null and withdrawal_reason is not null and open_calibrated_at is null));
create index ix_calibration_withdrawn_by on calibration (withdrawn_by);
