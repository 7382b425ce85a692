use proof::*;
fn main() {
    let mut sink = diagnostic::Sink::new();
    let mut next = 0..;
    let library = protocol::Library::shipped(|_, _| diagnostic::FileId(next.next().unwrap()), &mut sink);
    let manner = if std::env::args().nth(1).as_deref() == Some("singly") { Manner::Singly } else { Manner::ByRule };
    for family in &library.families {
        let space = Space::new(family);
        for axis in &space.axes { println!("{}: {:?} {:?}", axis.name, axis.classes.iter().map(|c| &c.name).collect::<Vec<_>>(), axis.covers); }
        for b in &space.beside { println!("  beside {:?}: {}", b.dimension.get().unwrap().name, b.because); }
        println!("product {} points {}", space.product(), points(&space, manner));
        let t = std::time::Instant::now();
        let w = walk(&space, manner, &Watch::default());
        println!("{:?}", t.elapsed());
        println!("records {} distinct {} covers {} excl {:?} unsound {} looser {} not_shared {} off {:?}", w.records, w.distinct_plans, w.cover_comparisons, w.excluded, w.unsound.len(), w.looser.len(), w.not_shared, w.off_grid);
        for u in w.unsound.iter().take(3) { println!("{:?}", u.point); for f in faults_at(&space, &u.point).1.iter().take(5) { println!("   {f}"); } }
        for l in w.looser.iter().take(5) { println!("{:?} {:?}", l.mild, l.worse); }
    }
}
