-- A wrong event of a meter is withdrawn with a reason; it stays on record, and nothing follows from it any more.
alter table meter_event add column withdrawn_at timestamp with time zone;
alter table meter_event add column withdrawn_by bigint;
alter table meter_event add column withdrawal_reason varchar(200);
alter table meter_event add constraint fk_meter_event_withdrawn_by foreign key (withdrawn_by) references person (id);
alter table meter_event add constraint ck_meter_event_withdrawal check (
  (withdrawn_at is null and withdrawn_by is null and withdrawal_reason is null)
  or (withdrawn_at is not null and withdrawn_by is not null and withdrawal_reason is not null));
create index ix_meter_event_withdrawn_by on meter_event (withdrawn_by);
