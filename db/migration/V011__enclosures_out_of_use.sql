-- Enclosures are taken out of use, never deleted: what was measured in them keeps its place.
alter table enclosure add column retired_at timestamp with time zone;
alter table enclosure_history add column retired_at timestamp with time zone;
comment on column enclosure.retired_at is 'since when it is out of use; none: in use';
create index ix_room_site on room (site_id, walking_order);
