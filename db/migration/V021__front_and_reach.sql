-- What keepers open and look through, and how far the animals come; neither need be said.
alter table enclosure add column front varchar(20);
alter table enclosure add column reach_kind varchar(20);
alter table enclosure add column reach_metres double precision;
alter table enclosure add constraint ck_enclosure_reach check (reach_metres > 0 and reach_metres <= 20);
alter table enclosure add constraint ck_enclosure_reach_kind check (reach_metres is null or reach_kind is not null);
comment on column enclosure.front is 'what keepers open and look through; none: not said';
comment on column enclosure.reach_kind is 'how far the animals come; none: as those who live there';
comment on column enclosure.reach_metres is 'm above the floor and what stands there; none: everywhere, or not said';

alter table enclosure_history add column front varchar(20);
alter table enclosure_history add column reach_kind varchar(20);
alter table enclosure_history add column reach_metres double precision;
