-- H2 writes a sequence down with every block of numbers, each time to the file. A crash skips what is left of a block.
alter table visit alter column id set cache 10000;
alter table reading alter column id set cache 10000;
alter table verdict alter column id set cache 10000;
