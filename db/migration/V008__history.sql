-- Every earlier form of people, places, species, animals and meters, with who changed it and when.
create sequence revision_seq start with 1 increment by 1;

create table revision (
  id bigint primary key,
  at bigint not null,
  person_id bigint
);
comment on column revision.at is 'ms since 1970-01-01T00:00:00Z';

create table site_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  name varchar(120),
  time_zone varchar(60),
  primary key (id, revision_id),
  constraint fk_site_history foreign key (revision_id) references revision (id)
);

create table person_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  sign_in_name varchar(60),
  name varchar(120),
  created_at timestamp with time zone,
  deactivated_at timestamp with time zone,
  primary key (id, revision_id),
  constraint fk_person_history foreign key (revision_id) references revision (id)
);

create table membership_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  person_id bigint,
  site_id bigint,
  role varchar(30),
  ends_on date,
  primary key (id, revision_id),
  constraint fk_membership_history foreign key (revision_id) references revision (id)
);

create table room_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  site_id bigint,
  name varchar(80),
  walking_order int,
  primary key (id, revision_id),
  constraint fk_room_history foreign key (revision_id) references revision (id)
);

create table enclosure_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  site_id bigint,
  room_id bigint,
  code varchar(20),
  walking_order int,
  width_metres double precision,
  depth_metres double precision,
  height_metres double precision,
  primary key (id, revision_id),
  constraint fk_enclosure_history foreign key (revision_id) references revision (id)
);

create table measuring_point_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  site_id bigint,
  enclosure_id bigint,
  code varchar(10),
  place varchar(120),
  role varchar(20),
  facing varchar(20),
  walking_order int,
  x_metres double precision,
  y_metres double precision,
  z_metres double precision,
  retired_at timestamp with time zone,
  primary key (id, revision_id),
  constraint fk_measuring_point_history foreign key (revision_id) references revision (id)
);

create table meter_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  site_id bigint,
  code varchar(20),
  description varchar(120),
  quantity varchar(30),
  resolution double precision,
  retired_at timestamp with time zone,
  primary key (id, revision_id),
  constraint fk_meter_history foreign key (revision_id) references revision (id)
);

create table species_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  site_id bigint,
  scientific_name varchar(120),
  common_name varchar(120),
  primary key (id, revision_id),
  constraint fk_species_history foreign key (revision_id) references revision (id)
);

create table animal_history (
  id bigint not null,
  revision_id bigint not null,
  revision_kind smallint,
  site_id bigint,
  species_id bigint,
  accession_number varchar(40),
  name varchar(80),
  primary key (id, revision_id),
  constraint fk_animal_history foreign key (revision_id) references revision (id)
);
