fn main(){ let t=std::fs::read_to_string("/tmp/cmu/words.txt").unwrap(); let (mut n,mut bad)=(0,0);
for l in t.lines(){ let (w,c)=l.split_once(' ').unwrap(); n+=1; let s=wording::syllables(w).to_string(); if !c.split(',').any(|x|x==s){bad+=1; println!("{w} {c} got {s}");}} println!("{bad} of {n}"); }
