# Lo que aparece en un dibujo y a su lado.

drawing-title = { $title }, { $side ->
        [left] brazo izquierdo
       *[right] brazo derecho
    }

# La palabra sobre el brazo operado.
drawing-side = { $side ->
        [left] IZQUIERDO
       *[right] DERECHO
    }

drawing-degrees = { $degrees }°
drawing-stop = alto

# Para quien no puede verlo.
drawing-description = { $start } El brazo operado está sombreado y rayado.
drawing-description-angle = { $start } El brazo operado está sombreado y rayado. El arco termina en { $degrees }°.
drawing-description-limit = { $start } El brazo operado está sombreado y rayado. El arco termina en { $degrees }°. Una barra gruesa sobre la flecha indica alto.

# Bajo el dibujo redondo pequeño.
drawing-from = { $from ->
        [above] visto desde arriba
        [feet] visto desde los pies
        [head] visto desde la cabeza
        [front] visto de frente
        [behind] visto desde atrás
       *[side] visto de lado
    }

drawing-seconds = { $seconds } s
