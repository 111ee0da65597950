-- A verdict names the rig that hung there and the vet's order that it was judged by.
alter table verdict add constraint fk_verdict_rig foreign key (rig_id) references rig_change (id);
alter table verdict add constraint fk_verdict_vet_order foreign key (vet_order_id) references vet_order (id);
