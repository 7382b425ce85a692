# Visit tests: what the patient is told.

test-forward-elevation-passive = Subir hacia delante, lo hace su terapeuta
    .start = Acuéstese boca arriba, el brazo junto al cuerpo.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta lo sube y para en su límite.

test-forward-elevation-active = Subir hacia delante, sin ayuda
    .start = Póngase de pie con la espalda recta, el brazo colgando, el pulgar hacia delante.
    .step-1 = Suba el brazo recto hacia delante, no más de lo que le digan.
    .step-2 = Aguante mientras se mide.

test-scapular-plane-elevation-active = Subir en la línea del omóplato, sin ayuda
    .start = Póngase de pie con la espalda recta, el brazo colgando, pulgar hacia arriba.
    .step-1 = Suba el brazo a medio camino entre delante y el lado.
    .step-2 = Aguante mientras se mide.

test-scapular-plane-elevation-passive = Subir en la línea del omóplato, lo hace su terapeuta
    .start = Acuéstese boca arriba, el brazo junto al cuerpo.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta lo sube, un poco hacia el lado.

test-forward-elevation-assisted = Subir hacia delante con ayuda de la otra mano
    .start = Acuéstese boca arriba y cruce los dedos.
    .step-1 = Suba las dos manos. Guía el otro brazo.
    .step-2 = Aguante mientras se mide.

test-abduction-passive = Subir hacia el lado, lo hace su terapeuta
    .start = Acuéstese boca arriba, el brazo junto al cuerpo, la palma hacia arriba.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta lo lleva hacia el lado.

test-abduction-active = Subir hacia el lado, sin ayuda
    .start = Póngase de pie con la espalda recta, el brazo colgando, la palma hacia delante.
    .step-1 = Suba el brazo hacia el lado, no más de lo que le digan.
    .step-2 = Aguante mientras se mide.

test-external-rotation-passive = Girar hacia fuera junto al cuerpo, lo hace su terapeuta
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo, la mano hacia el techo.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta gira la mano hacia fuera.

test-external-rotation-active = Girar hacia fuera junto al cuerpo, sin ayuda
    .start = Póngase de pie con la espalda recta. El codo está doblado y pegado al cuerpo, la mano hacia delante.
    .step-1 = Gire la mano hacia fuera, no más de lo que le digan.
    .step-2 = Aguante mientras se mide.

test-external-rotation-assisted = Girar hacia fuera con un palo
    .start = Acuéstese boca arriba, la mano hacia el techo, el palo en las dos manos.
    .step-1 = Gire la mano hacia fuera con ayuda del palo.
    .step-2 = Aguante mientras se mide.

test-external-rotation-raised-passive = Girar hacia fuera con el codo levantado, lo hace su terapeuta
    .start = Acuéstese boca arriba, la parte alta del brazo hacia el lado, la mano hacia el techo.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta deja bajar la mano hacia atrás.

test-external-rotation-raised-active = Girar hacia fuera con el codo levantado, sin ayuda
    .start = Acuéstese boca arriba, la parte alta del brazo hacia el lado, la mano hacia el techo.
    .step-1 = Deje bajar la mano hacia atrás, no más de lo que le digan.
    .step-2 = Aguante mientras se mide.

test-internal-rotation-passive = Girar hacia dentro, lo hace su terapeuta
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo, la mano hacia el techo.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta baja la mano hacia el vientre.

test-internal-rotation-active = Girar hacia dentro, sin ayuda
    .start = Póngase de pie con la espalda recta. El codo está doblado y pegado al cuerpo, la mano hacia delante.
    .step-1 = Lleve la mano hacia el vientre.
    .step-2 = Aguante mientras se mide.

test-extension-passive = Llevar hacia atrás, lo hace su terapeuta
    .start = Póngase de pie con la espalda recta, el brazo colgando.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta lo lleva hacia atrás.

test-extension-active = Llevar hacia atrás, sin ayuda
    .start = Póngase de pie con la espalda recta, el brazo colgando.
    .step-1 = Mueva el brazo recto hacia atrás, no más de lo que le digan.
    .step-2 = Aguante mientras se mide.

test-hand-behind-back = Mano detrás de la espalda
    .start = Póngase de pie con la espalda recta, la mano detrás de la cadera.
    .step-1 = Deslice el pulgar por la columna hacia arriba hasta donde quiera.
    .step-2 = Su terapeuta anota hasta dónde llega.

test-cross-body-active = Cruzar el brazo sobre el pecho
    .start = Siéntese con la espalda recta, el brazo levantado hacia delante.
    .step-1 = Lleve el brazo al otro lado del pecho.
    .step-2 = Aguante mientras se mide.

test-rotation-effort-at-side = Empujar leve hacia fuera junto al cuerpo
    .start = Siéntese con la espalda recta, el codo doblado y pegado al cuerpo.
    .step-1 = Empuje leve la mano hacia fuera contra su terapeuta.
    .step-2 = No use más de un cuarto de su fuerza.

test-strength-at-90 = Fuerza a la altura del hombro
    .start = Póngase de pie con la espalda recta. El brazo queda a la altura del hombro, a medio camino hacia el lado.
    .step-1 = Empuje hacia arriba contra el medidor y aguante.
    .step-2 = Respire y suelte despacio.

test-rotation-strength-at-side = Fuerza de girar junto al cuerpo
    .start = Siéntese con la espalda recta, el codo doblado y pegado al cuerpo.
    .step-1 = Empuje hacia fuera contra el medidor, luego hacia dentro.
    .step-2 = Respire y suelte despacio.

test-elbow-passive = Codo, lo hace su terapeuta
    .start = Siéntese con el antebrazo sobre la mesa.
    .step-1 = Deje flojo el brazo.
    .step-2 = Su terapeuta dobla y estira el codo.

test-elbow-active = Codo, sin ayuda
    .start = Siéntese con el brazo colgando.
    .step-1 = Doble y estire el codo.

test-grip = Mano y agarre, leve
    .start = Siéntese con el cabestrillo puesto.
    .step-1 = Cierre la mano en un puño flojo y ábrala.
    .step-2 = Diga dónde siente dormida la mano.
