//! Every kind of chart, as SVG files in the folder named as the argument. All data is invented.

mod arcs;
mod lines;
mod plots;

use std::path::PathBuf;
use std::{env, fs, io};

use drawing::Svg;
use drawing::chart::ChartError;

/// A picture with the name of its file.
type Named = (&'static str, Result<Svg, ChartError>);

fn main() -> io::Result<()> {
    let folder = PathBuf::from(env::args_os().nth(1).unwrap_or_else(|| "charts".into()));
    fs::create_dir_all(&folder)?;
    for (name, picture) in lines::all().into_iter().chain(arcs::all()).chain(plots::all()) {
        match picture {
            Ok(svg) => fs::write(folder.join(name).with_extension("svg"), svg.finish())?,
            Err(fault) => eprintln!("{name}: {fault}"),
        }
    }
    Ok(())
}
