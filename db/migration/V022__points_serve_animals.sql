-- Which single animals a point serves, beside species; neither: all that live there.
create table point_animal (
  point_id bigint not null,
  animal_id bigint not null,
  constraint pk_point_animal primary key (point_id, animal_id),
  constraint fk_point_animal_point foreign key (point_id) references measuring_point (id),
  constraint fk_point_animal_animal foreign key (animal_id) references animal (id)
);
create index ix_point_animal_animal on point_animal (animal_id);

create table point_animal_history (
  revision_id bigint not null,
  point_id bigint not null,
  animal_id bigint not null,
  revision_kind smallint,
  constraint pk_point_animal_history primary key (revision_id, point_id, animal_id),
  constraint fk_point_animal_history foreign key (revision_id) references revision (id)
);
